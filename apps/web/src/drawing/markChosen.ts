const BAND = "chosen-band";
const SVG = "http://www.w3.org/2000/svg";

/** Lays a verdigris band under every mark of the thing chosen and takes away the one before. The thing's own colours are left alone. */
export function markChosen(marks: SVGGElement, id: string | null): void {
  for (const old of marks.querySelectorAll(`.${BAND}`)) old.remove();
  if (id === null) return;
  for (const group of marks.querySelectorAll(`[data-id="${CSS.escape(id)}"]`)) {
    const line = group.querySelector("path[stroke]");
    const isLine = line !== null && group.querySelector("circle, rect, text") === null;
    group.insertBefore(isLine ? lineBand(line) : boxBand(group as SVGGElement), group.firstChild);
  }
}

function lineBand(line: Element): SVGElement {
  const band = line.cloneNode() as SVGElement;
  band.setAttribute("class", BAND);
  for (const name of ["stroke", "stroke-width", "stroke-dasharray", "fill"])
    band.removeAttribute(name);
  return band;
}

function boxBand(group: SVGGElement): SVGElement {
  const { x, y, width, height } = group.getBBox();
  const box = document.createElementNS(SVG, "rect");
  const values = {
    x: x - 1.5,
    y: y - 1.5,
    width: width + 3,
    height: height + 3,
    rx: 1,
    class: `${BAND} box-band`,
  };
  for (const [name, value] of Object.entries(values)) box.setAttribute(name, String(value));
  return box;
}
