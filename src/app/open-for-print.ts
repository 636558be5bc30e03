/** Opens every "why" while the page is printed, and closes again what was closed. */
export function openForPrint(window: Window): void {
  let opened: HTMLDetailsElement[] = [];
  window.addEventListener("beforeprint", () => {
    opened = Array.from(window.document.querySelectorAll<HTMLDetailsElement>("details:not([open])"));
    for (const details of opened) details.open = true;
  });
  window.addEventListener("afterprint", () => {
    for (const details of opened) details.open = false;
    opened = [];
  });
}
