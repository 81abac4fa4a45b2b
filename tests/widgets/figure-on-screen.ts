import type { Component } from 'svelte';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { practice } from '#site/widgets/practice.svelte.ts';

/** A figure in a frame of its own, as wide as a column or a phone leaves it [px]. */
export async function figureOnScreen(figure: Component<never>, props: Record<string, unknown>, width = 752) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const screen = await render(figure as Component, { props }, { baseElement: frame });
  const press = async (element: Element, keys: string) => {
    (element as HTMLElement).focus();
    await userEvent.keyboard(keys);
  };
  const push = (name: string, keys: string) =>
    press(screen.getByRole('slider', { name: `${name}, slider` }).element(), keys);
  const readings = () =>
    [...frame.querySelectorAll('.reading .figure')].map((one) => one.textContent?.replace(/\s+/g, ' ').trim());
  /** A part of the markup that shows a number gone wrong. */
  const broken = () => frame.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0];
  return { screen, frame, press, push, readings, broken };
}

/** As a browser that has kept nothing, at an address without a case. */
export function asNew(): void {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
}
