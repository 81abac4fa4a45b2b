/** The space between a number and its unit: it does not break a line and is drawn thin. */
export const unitSpace = '\u00A0';

/** A piece of a sentence. Pages set a formula by its TeX and speak it by its words. */
export type Segment =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'quantity'; readonly text: string }
  | { readonly kind: 'formula'; readonly tex: string; readonly spoken: string };

/** A paragraph in pieces. */
export type Words = readonly Segment[];

/** A quantity as a piece of its own, so that a page can set its figures and never breaks it. */
export const quantity = (text: string): Segment => ({ kind: 'quantity', text });

/** A formula with the words in which it is spoken. */
export const formula = (tex: string, spoken: string): Segment => ({ kind: 'formula', tex, spoken });

/** Template tag for paragraphs: plain strings that are put in become text, other pieces stay what they are. */
export function words(texts: TemplateStringsArray, ...pieces: readonly (Segment | string)[]): Words {
  const all = texts.flatMap((text, i): Segment[] => {
    const piece = pieces[i];
    const own: Segment = { kind: 'text', text };
    if (piece === undefined) return [own];
    return [own, typeof piece === 'string' ? { kind: 'text', text: piece } : piece];
  });
  return all.filter((piece) => piece.kind !== 'text' || piece.text !== '');
}

/** A paragraph as plain text, formulas as they are spoken. */
export function plainText(paragraph: Words): string {
  return paragraph.map((piece) => (piece.kind === 'formula' ? piece.spoken : piece.text)).join('');
}
