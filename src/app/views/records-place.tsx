// Where the open table goes: its view is fetched when the first table is opened, so that a notebook does not wait for it.
import { useEffect, useState } from "preact/hooks";
import type { RecordsState } from "../state/records-state.ts";

type View = typeof import("./records-view.tsx").RecordsView;

/** The view of the open table, once it is here. */
export const RecordsPlace = ({ state }: { readonly state: RecordsState }) => {
  const [here, setHere] = useState<{ readonly View: View } | null>(null);
  useEffect(() => {
    void import("./records-view.tsx").then(({ RecordsView }) => setHere({ View: RecordsView }));
  }, []);
  return here === null ? <p>Reading the records.</p> : <here.View state={state} />;
};
