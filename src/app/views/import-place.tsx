// Where bringing in a table goes: its view is fetched when it is first opened, so that a notebook does not wait for it.
import { useEffect, useState } from "preact/hooks";
import type { ImportViewProps } from "./import-view.tsx";

type View = typeof import("./import-view.tsx").ImportView;

/** The view, once it is here. */
export const ImportPlace = (props: ImportViewProps) => {
  const [here, setHere] = useState<{ readonly View: View } | null>(null);
  useEffect(() => {
    void import("./import-view.tsx").then(({ ImportView }) => setHere({ View: ImportView }));
  }, []);
  return here === null ? <p>Opening.</p> : <here.View {...props} />;
};
