const widths: [letters: RegExp, em: number][] = [
  [/[ilj.,:;'|!·\u202F]/, 0.26],
  [/[ \u00A0]/, 0.2],
  [/[frt()/-]/, 0.34],
  [/[mwMW%]/, 0.82],
  [/[A-Z]/, 0.6],
  [/[sc]/, 0.44],
];

/** About how wide a text is in the sheets' face [px], enough to keep labels apart where no screen can be asked. */
export function textWidth(text: string, size = 13, bold = false): number {
  let em = 0;
  for (const letter of text) em += widths.find(([letters]) => letters.test(letter))?.[1] ?? 0.52;
  return em * size * (bold ? 1.05 : 1);
}
