import type { SheetFlight } from './load-sheet.js';

/**
 * How two sheets of a flight are told apart: by version; within one version, which says other things as more becomes
 * known, by check code.
 */
export const sheetName = (
  { version, checkCode }: { readonly version: number; readonly checkCode: string | null },
  other: { readonly version: number },
): string => (version === other.version && checkCode !== null ? `code ${checkCode}` : `version ${version}`);

/** Which papers a sheet makes void: those of the version before, and those of its own version with another code. */
export function replacesWords(
  { version, replaces, printedCodes = [] }: SheetFlight,
  checkCode: string,
): string | null {
  const codes = printedCodes.filter((code) => code !== checkCode);
  const old = [
    ...(replaces === null ? [] : [`version ${replaces}`]),
    ...(codes.length === 0 ? [] : [`code ${codes.join(', code ')}`]),
  ].join(' and ');
  if (old === '') return null;
  return codes.length === 0
    ? `Version ${version} replaces ${old}: throw ${old} away.`
    : `Version ${version}, now code ${checkCode}: throw ${old} away.`;
}
