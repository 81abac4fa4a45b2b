/** Where a live figure gets its time from. */
export interface Clock {
  /** Calls `tick` with the seconds since the call before, until the answer is called. */
  start(tick: (seconds: number) => void): () => void;
}

const longest = 0.25; // s: a page that stood still for longer does not leap
const calm = 1; // s between ticks where less motion is wished

/** The frames of the page, or once a second where less motion is wished. While the page is hidden no time passes. */
export const frameClock: Clock = {
  start(tick) {
    const less = matchMedia('(prefers-reduced-motion: reduce)');
    let before: number | undefined;
    let saved = 0;
    let request = requestAnimationFrame(frame);

    function frame(now: number): void {
      request = requestAnimationFrame(frame);
      saved += before === undefined ? 0 : Math.min(longest, (now - before) / 1000);
      before = now;
      if (saved < (less.matches ? calm : 1e-4)) return;
      const seconds = saved;
      saved = 0;
      tick(seconds);
    }
    function hidden(): void {
      if (document.hidden) before = undefined;
    }
    document.addEventListener('visibilitychange', hidden);
    return () => {
      cancelAnimationFrame(request);
      document.removeEventListener('visibilitychange', hidden);
    };
  },
};
