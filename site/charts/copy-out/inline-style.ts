import { plainColour } from './colour.ts';

// A drawing on the page is styled by rules and tokens. A drawing in a file has only its attributes, so what the browser has
// computed for each element is written there, where it differs from what the element has anyway.

/** Properties that pass to the children, with what a drawing begins with. */
const inherited: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0px',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
  'font-family': '',
  'font-size': '16px',
  'font-style': 'normal',
  'font-weight': '400',
  'text-anchor': 'start',
  visibility: 'visible',
};

/** Properties of an element alone. */
const own: Readonly<Record<string, string>> = {
  opacity: '1',
  'stop-color': 'rgb(0, 0, 0)',
  'stop-opacity': '1',
  'clip-path': 'none',
  'dominant-baseline': 'auto',
};

/** What an element is drawn with, by property, as the browser has computed it. */
export type Computed = Readonly<Record<string, string>>;

/** What a drawing begins with. */
export const plainStyle: Computed = inherited;

/**
 * Writes onto `copy` what the browser has computed for `element`, as attributes: what passes to children only where it
 * differs from the parent's, which is returned for the element's own children.
 */
export function inlineStyle(element: Element, copy: Element, parent: Computed): Computed {
  const style = getComputedStyle(element);
  const now: Record<string, string> = {};
  for (const name of Object.keys(inherited)) {
    now[name] = style.getPropertyValue(name);
    // an attribute beside an equal one of the parent is idle, and would stand in the way of what a <use> hands down
    if (now[name] === parent[name]) copy.removeAttribute(name);
    else write(copy, name, now[name] ?? '');
  }
  for (const [name, plain] of Object.entries(own)) {
    const value = style.getPropertyValue(name);
    if (value === plain || (name.startsWith('stop-') && element.localName !== 'stop')) copy.removeAttribute(name);
    else write(copy, name, value);
  }
  const moved = style.transform;
  if (moved !== 'none' && !copy.hasAttribute('transform')) copy.setAttribute('transform', moved);
  return now;
}

const colours = ['fill', 'stroke', 'stop-color'];

function write(copy: Element, name: string, value: string): void {
  const colour = colours.includes(name) ? plainColour(value) : undefined;
  if (!colour) copy.setAttribute(name, plainValue(value));
  else {
    copy.setAttribute(name, colour.hex);
    if (colour.alpha < 1)
      copy.setAttribute(name === 'stop-color' ? 'stop-opacity' : `${name}-opacity`, `${colour.alpha}`);
  }
}

/** Lengths without 'px', references without quotes, names of faces in single ones. */
function plainValue(value: string): string {
  return value
    .replace(/(\d)px/g, '$1')
    .replace(/url\("(.*?)"\)/g, 'url($1)')
    .replaceAll('"', "'");
}
