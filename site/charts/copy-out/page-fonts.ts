// A picture that is drawn to pixels cannot reach the page's faces, so those it uses are put into it.

/** The page's @font-face rules for these families, for the letters of `text`, with their files inside; empty where none can be had. */
export async function embeddedFaces(families: readonly string[], text: string): Promise<string> {
  const rules = fontRules().filter((rule) => {
    const family = rule.style.getPropertyValue('font-family').replace(/["']/g, '');
    const upright = rule.style.getPropertyValue('font-style') !== 'italic';
    return upright && families.includes(family) && covers(rule.style.getPropertyValue('unicode-range'), text);
  });
  const faces = await Promise.all(rules.map(embedded));
  return faces.join('\n');
}

function fontRules(): CSSFontFaceRule[] {
  return [...document.styleSheets].flatMap((sheet) => {
    try {
      return [...sheet.cssRules].filter((rule) => rule instanceof CSSFontFaceRule);
    } catch {
      return []; // a sheet of another origin keeps its rules to itself
    }
  });
}

/** Whether any letter lies in a range such as 'U+0-FF, U+131'; one without a range has all. */
function covers(range: string, text: string): boolean {
  const spans = [...range.matchAll(/U\+([0-9a-f]+)(?:-([0-9a-f]+))?/gi)].map(([, from = '0', to = from]) => [
    Number.parseInt(from, 16),
    Number.parseInt(to, 16),
  ]);
  if (spans.length === 0) return true;
  const codes = [...new Set(text)].map((letter) => letter.codePointAt(0) ?? 0);
  return codes.some((code) => spans.some(([from = 0, to = 0]) => code >= from && code <= to));
}

async function embedded(rule: CSSFontFaceRule): Promise<string> {
  const [, address] = /url\("?(.*?)"?\)/.exec(rule.style.getPropertyValue('src')) ?? [];
  if (address === undefined) return '';
  try {
    const base = rule.parentStyleSheet?.href ?? location.href;
    const answer = await fetch(new URL(address, base));
    const inside = answer.ok ? await dataAddress(await answer.blob()) : '';
    return inside ? rule.cssText.replace(/url\(.*?\)/, `url(${inside})`) : '';
  } catch {
    return ''; // the next face of the list stands in
  }
}

function dataAddress(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}
