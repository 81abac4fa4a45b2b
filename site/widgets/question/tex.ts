const letters: Readonly<Record<string, string>> = {
  alpha: 'α',
  theta: 'θ',
  tau: 'τ',
  rho: 'ρ',
  pi: 'π',
  lambda: 'λ',
};
const uprights: Readonly<Record<string, string>> = {
  Delta: 'Δ',
  Omega: 'Ω',
  Sigma: 'Σ',
  ',': '\u2009',
  ';': '\u2005',
  ' ': '\u2005',
  '%': '%',
  ln: 'ln\u2009',
};
const signs: Readonly<Record<string, string>> = { cdot: '·', times: '×', approx: '≈', le: '≤', ge: '≥' };
const ignored = new Set(['left', 'right', 'bigl', 'bigr', 'Bigl', 'Bigr', 'displaystyle', '!']);
const token = /\\([A-Za-z]+|.)|([{}^_])|([A-Za-z])|(\d+(?:\.\d+)?)|(\S)/gu;

type Token = RegExpMatchArray;

/**
 * The small part of TeX that questions are written in, as HTML of the prose's own face: letters, digits, signs, `^`, `_`,
 * `\frac`, `\sqrt`, `\mathrm`. A command that it does not know throws, so that a test over all templates finds it.
 */
export function texHtml(tex: string): string {
  const tokens = [...tex.matchAll(token)];
  let html = '';
  for (let at = 0; at < tokens.length; ) {
    const piece = one(tokens, at, false);
    html += piece.html;
    at = piece.next;
  }
  return html;
}

interface Piece {
  html: string;
  next: number;
}

/** What stands at `at`: one sign, or a command with what belongs to it. */
function one(tokens: readonly Token[], at: number, upright: boolean): Piece {
  const [whole, command, mark, letter, number, other] = tokens[at] ?? [];
  if (whole === undefined) throw new Error('a formula ends too soon');
  if (command !== undefined) return ofCommand(tokens, at, command, upright);
  if (mark === '^') return wrapped(tokens, at + 1, 'sup', upright);
  if (mark === '_') return wrapped(tokens, at + 1, 'sub', upright);
  if (mark === '{') return group(tokens, at, upright);
  if (mark !== undefined) throw new Error('a formula has a brace too many');
  if (letter !== undefined) return { html: upright ? letter : `<i>${letter}</i>`, next: at + 1 };
  return { html: number ?? signHtml(other ?? ''), next: at + 1 };
}

/** A group in braces, or the one thing that stands there. */
function group(tokens: readonly Token[], from: number, upright: boolean): Piece {
  if (tokens[from]?.[2] !== '{') return one(tokens, from, upright);
  let html = '';
  let at = from + 1;
  while (tokens[at]?.[2] !== '}') {
    const piece = one(tokens, at, upright);
    html += piece.html;
    at = piece.next;
  }
  return { html, next: at + 1 };
}

function wrapped(tokens: readonly Token[], at: number, tag: 'sup' | 'sub', upright: boolean): Piece {
  const { html, next } = group(tokens, at, upright);
  return { html: `<${tag}>${html}</${tag}>`, next };
}

function ofCommand(tokens: readonly Token[], at: number, command: string, upright: boolean): Piece {
  const next = at + 1;
  if (ignored.has(command)) return { html: '', next };
  const letter = letters[command];
  if (letter !== undefined) return { html: `<i>${letter}</i>`, next };
  const plain = uprights[command];
  if (plain !== undefined) return { html: plain, next };
  const sign = signs[command];
  if (sign !== undefined) return { html: signHtml(sign), next };
  if (command === 'mathrm' || command === 'text') return group(tokens, next, true);
  if (command === 'sqrt') {
    const under = group(tokens, next, upright);
    return { html: `<span class="root">√<span class="under">${under.html}</span></span>`, next: under.next };
  }
  if (command === 'frac') {
    const over = group(tokens, next, upright);
    const under = group(tokens, over.next, upright);
    return {
      html: `<span class="fraction"><span>${over.html}</span><span>${under.html}</span></span>`,
      next: under.next,
    };
  }
  throw new Error(`a formula has \\${command}, which a question cannot set`);
}

/** A sign between two terms keeps its distance; a minus is a true minus. */
function signHtml(text: string): string {
  const shown = text === '-' ? '−' : text;
  if (/[=≈≤≥+−·×]/.test(shown)) return `<span class="sign">${shown}</span>`;
  return shown.replace(/[<>&]/g, (mark) => `&#${mark.charCodeAt(0)};`);
}
