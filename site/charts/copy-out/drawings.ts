import { type Computed, inlineStyle, plainStyle } from './inline-style.ts';
import { painterOf } from './painted.ts';

/** The drawings of a figure, laid out as on the screen, as one piece of SVG. */
export interface Drawings {
  readonly width: number;
  readonly height: number;
  /** SVG, its elements in px from the top left of the whole. */
  readonly markup: string;
}

interface Placed {
  readonly element: SVGSVGElement | HTMLCanvasElement;
  readonly box: DOMRect;
}

const least = { width: 64, height: 40 }; // px: smaller drawings are signs of controls and readings
const mostGap = 24; // px between drawings one under the other, where readings stand between them on the screen
const sharpness = 2; // pixels of a painted part for each px

/** The drawings inside `body`: its SVG and its painted parts, without signs and without what is not shown. */
export function drawingsOf(body: Element): Drawings {
  const placed = [...body.querySelectorAll<SVGSVGElement | HTMLCanvasElement>('svg, canvas')]
    .map((element) => ({ element, box: reach(element) }))
    .filter(({ element, box }) => {
      const { width, height } = element.getBoundingClientRect();
      return width >= least.width && height >= least.height && box.width > 0;
    });
  if (placed.length === 0) return { width: 0, height: 0, markup: '' };
  const left = Math.min(...placed.map(({ box }) => box.left));
  const right = Math.max(...placed.map(({ box }) => box.right));
  const tops = closedUp(placed);
  const height = Math.max(...placed.map(({ box }, i) => (tops[i] ?? 0) + box.height));
  const markup = placed.map((one, i) => markupOf(one, one.box.left - left, tops[i] ?? 0)).join('\n');
  return { width: Math.ceil(right - left), height: Math.ceil(height), markup };
}

/** Where a drawing reaches on the screen: as wide as its box, as tall as what is drawn, and what of it stands over the edges. */
function reach(element: SVGSVGElement | HTMLCanvasElement): DOMRect {
  const box = element.getBoundingClientRect();
  if (!(element instanceof SVGSVGElement)) return box;
  const { x, y, width, height } = element.getBBox();
  const left = Math.min(0, x - 2);
  const right = Math.max(box.width, x + width + 2);
  return new DOMRect(box.left + left, box.top + y - 2, right - left, height + 4);
}

/** Top of each drawing from the top of the whole, wide gaps between them closed up. */
function closedUp(placed: readonly Placed[]): number[] {
  const order = placed.map(({ box }, i) => ({ box, i })).sort((a, b) => a.box.top - b.box.top);
  const tops = new Array<number>(placed.length).fill(0);
  let shift = -(order[0]?.box.top ?? 0);
  let bottom = 0;
  for (const { box, i } of order) {
    const gap = box.top + shift - bottom;
    if (gap > mostGap) shift -= gap - mostGap;
    tops[i] = box.top + shift;
    bottom = Math.max(bottom, box.bottom + shift);
  }
  return tops;
}

function markupOf({ element, box }: Placed, x: number, y: number): string {
  const own = element.getBoundingClientRect();
  const place = { x: round(x + own.left - box.left), y: round(y + own.top - box.top) };
  const size = { width: round(own.width), height: round(own.height) };
  if (element instanceof HTMLCanvasElement) return imageOf(element, { ...place, ...size });
  const copy = element.cloneNode(true) as SVGSVGElement;
  tidy(element, copy, plainStyle);
  for (const [name, value] of Object.entries({ ...place, ...size })) copy.setAttribute(name, String(value));
  copy.setAttribute('overflow', 'visible');
  return new XMLSerializer().serializeToString(copy);
}

function imageOf(canvas: HTMLCanvasElement, place: Readonly<Record<'x' | 'y' | 'width' | 'height', number>>): string {
  const paint = painterOf(canvas);
  const to = paint ? document.createElement('canvas') : canvas;
  if (paint) {
    to.width = Math.round(place.width * sharpness);
    to.height = Math.round(place.height * sharpness);
    paint(to);
  }
  const attributes = Object.entries(place).map(([name, value]) => `${name}="${value}"`);
  return `<image ${attributes.join(' ')} href="${to.toDataURL('image/png')}"/>`;
}

const kept =
  /^(id|x|y|x1|x2|y1|y2|cx|cy|r|rx|ry|d|points|width|height|viewBox|href|offset|dx|dy|pathLength|transform|gradientUnits|gradientTransform|patternUnits|patternTransform|clipPathUnits|xmlns|textLength|lengthAdjust)$/;

/** Writes the computed style onto a copy and all in it, and takes away what only the page needs. */
function tidy(element: Element, copy: Element, parent: Computed): void {
  for (const { name, value } of [...copy.attributes]) {
    if (!kept.test(name) || value.includes('var(')) copy.removeAttribute(name);
  }
  const now = inlineStyle(element, copy, parent);
  const copies = [...copy.childNodes];
  for (const [i, child] of [...element.childNodes].entries()) {
    const its = copies[i];
    if (!its) continue;
    if (child instanceof Element && its instanceof Element) {
      if (getComputedStyle(child).display === 'none' && !inDefs(child)) its.remove();
      else tidy(child, its, now);
    } else if (child.nodeType !== Node.TEXT_NODE || !child.textContent?.trim()) its.remove();
  }
}

const inDefs = (element: Element): boolean => element.closest('defs, clipPath, linearGradient') !== null;
const round = (value: number): number => Math.round(value * 100) / 100;
