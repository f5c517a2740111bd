interface StepperProps {
  readonly word: string;
  readonly how: string;
  readonly many: number;
  readonly onStep: (many: number) => void;
}

/** A number of drums, one more or one less at a press. */
export const Stepper = ({ word, how, many, onStep }: StepperProps) => (
  <div className="step">
    <span>
      <b>{word}</b>
      <span className="small soft says">{how}</span>
    </span>
    <button
      type="button"
      className="btn"
      aria-label={`one less ${word}`}
      onClick={() => onStep(Math.max(0, many - 1))}
    >
      −
    </button>
    <output aria-label={word}>{many}</output>
    <button type="button" className="btn" aria-label={`one more ${word}`} onClick={() => onStep(many + 1)}>
      +
    </button>
  </div>
);
