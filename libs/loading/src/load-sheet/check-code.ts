/** Signs that survive handwriting: without B 8, S 5, Z 2, O 0, I 1 L. */
const signs = 'ACDEFGHJKMNPQRTUVWXY34679';

/**
 * The check code of a sheet: three signs from its text, and one from its flight and version, so that two versions of
 * a flight never share a code (up to 25 versions apart). It shows that two copies are the same; it protects nothing.
 */
export function checkCode(text: string, flight: string, version: number): string {
  let rest = mix(text);
  let code = '';
  for (let place = 0; place < 3; place++) {
    code += signs[rest % signs.length]!;
    rest = Math.floor(rest / signs.length);
  }
  return code + signs[(mix(flight) + version) % signs.length]!;
}

/** FNV-1a over UTF-16 code units, stirred so that every bit of the text moves every bit of the sum; 32 bits. */
function mix(text: string): number {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    sum = Math.imul(sum ^ (unit & 0xff), 0x01000193);
    sum = Math.imul(sum ^ (unit >>> 8), 0x01000193);
  }
  sum = Math.imul(sum ^ (sum >>> 16), 0x85ebca6b);
  sum = Math.imul(sum ^ (sum >>> 13), 0xc2b2ae35);
  return (sum ^ (sum >>> 16)) >>> 0;
}
