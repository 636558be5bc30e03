/** Puts the slip under the active cell, inside what is in view sideways, and brings it into view. */
export function placeSlip(scroller: HTMLElement): void {
  const [cell, slip] = [
    scroller.querySelector<HTMLElement>("[data-active]"),
    scroller.querySelector<HTMLElement>(".slip"),
  ];
  if (cell === null || slip === null) return;
  const [box, frame] = [cell.getBoundingClientRect(), scroller.getBoundingClientRect()];
  const room = Math.max(0, scroller.clientWidth - slip.offsetWidth);
  const left = Math.min(Math.max(0, box.left - frame.left), room);
  slip.style.insetInlineStart = `${left + scroller.scrollLeft}px`;
  slip.style.insetBlockStart = `${box.bottom - frame.top + scroller.scrollTop}px`;
  slip.scrollIntoView({ block: "nearest", inline: "nearest" });
}
