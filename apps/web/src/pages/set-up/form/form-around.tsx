import { createContext } from 'react';
import type { FieldSpec } from './field-spec.js';
import type { Typed } from './typed.js';

interface Around {
  /** What is wrong at a path of the document, in words. */
  readonly faultAt: (path: string) => string | undefined;
  /** What looks wrong there and may be right. */
  readonly doubtAt: (path: string) => string | undefined;
  /** Names of things that a field may speak of. */
  readonly offered: (list: string) => readonly string[];
}

export const FormAround = createContext<Around>({
  faultAt: () => undefined,
  doubtAt: () => undefined,
  offered: () => [],
});

export interface FieldProps<Spec extends FieldSpec = FieldSpec> {
  readonly spec: Spec;
  readonly typed: Typed;
  readonly path: string;
  readonly onChange: (typed: Typed) => void;
}

export const FaultLine = ({ words }: { readonly words: string | undefined }) =>
  words === undefined ? null : <p className="plum set-up-fault">Fault: {words}</p>;
