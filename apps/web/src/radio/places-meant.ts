/** Places by their code, or by the end of it that people say: LOR for XLOR. More than one: it has to be asked. */
export const placesMeant = (
  word: string,
  places: readonly { readonly code: string }[],
): readonly string[] => {
  const said = word.toUpperCase();
  if (places.some(({ code }) => code === said)) return [said];
  return said.length < 2 ? [] : places.flatMap(({ code }) => (code.endsWith(said) ? [code] : []));
};
