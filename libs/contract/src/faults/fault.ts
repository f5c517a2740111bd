/** Something in a document that has to be put right, or that looks wrong and is worth a look. */
export interface Fault {
  /** Where, like `stripLimits[12].landingLb`; empty: the document as a whole. */
  readonly path: string;
  readonly problem: string;
  /** What to do about it. */
  readonly remedy: string;
}

/** The fault as one line: where, what, what next. */
export const printFault = (fault: Fault): string =>
  `${fault.path === '' ? 'document' : fault.path}: ${fault.problem} ${fault.remedy}`;

/** A path in the way people read it: `places[3].runway.lengthFt`. */
export const printPath = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (printed, key) =>
      typeof key === 'number'
        ? `${printed}[${key}]`
        : printed === ''
          ? String(key)
          : `${printed}.${String(key)}`,
    '',
  );
