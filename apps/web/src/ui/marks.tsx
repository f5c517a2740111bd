export type Level = 'above' | 'below' | 'critical' | 'unknown' | 'held';

const words: Readonly<Record<Level, string>> = {
  above: 'Above minimum',
  below: 'Below minimum',
  critical: 'Below critical',
  unknown: 'Unknown',
  held: 'HOLD',
};

interface LevelMarkProps {
  readonly level: Level;
  /** Instead of the usual words. */
  readonly words?: string;
}

/** A level as word, shape and fill together. */
export const LevelMark = ({ level, words: own }: LevelMarkProps) => (
  <span className={`level ${level}`}>
    {level !== 'held' && level !== 'critical' && <LevelShape level={level} />}
    <span className="words">{own ?? words[level]}</span>
  </span>
);

/** The shape alone, for a drawing that has the words beside it. */
export const LevelShape = ({ level }: { readonly level: Level }) => (
  <svg className="mark" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
    {shapes[level]}
  </svg>
);

const square = { x: 1, y: 1, width: 10, height: 10, fill: 'none', strokeWidth: 1.5 } as const;

const shapes: Readonly<Record<Level, React.ReactNode>> = {
  above: <rect {...square} stroke="var(--ink)" />,
  below: (
    <>
      <rect {...square} stroke="var(--ochre)" />
      <path d="M1 7L5 11M1 4L8 11M3 3L11 11" stroke="var(--ochre)" strokeWidth="1.6" fill="none" />
      <path d="M1 1L11 11L1 11Z" fill="var(--ochre)" fillOpacity=".35" />
    </>
  ),
  critical: <rect x="0" y="0" width="12" height="12" fill="var(--plum)" />,
  unknown: (
    <>
      <rect {...square} stroke="var(--slate)" strokeDasharray="1.5 1.7" />
      <text x="6" y="9.6" fontSize="10" fontWeight="600" textAnchor="middle">
        ?
      </text>
    </>
  ),
  held: <path d="M0 6H12" stroke="var(--ink)" strokeWidth="2" />,
};

/** Beside the word: frozen, a re-plan leaves it alone. */
export const Lock = () => (
  <svg className="mark" viewBox="0 0 12 12" aria-hidden="true">
    <path d="M3.5 6V4a2.5 2.5 0 0 1 5 0v2" fill="none" stroke="var(--ink)" strokeWidth="1.5" />
    <rect x="2" y="6" width="8" height="5.5" fill="var(--ink)" />
  </svg>
);

interface StateWordProps {
  /** As the server writes it: `offered`. */
  readonly state: string;
  readonly frozen?: boolean;
  readonly needsDecision?: boolean;
}

/** "Needs a decision  [lock] Approved". */
export const StateWord = ({ state, frozen, needsDecision }: StateWordProps) => (
  <span className="state-word">
    {needsDecision && <span className="band">Needs a decision</span>}
    {frozen && (
      <>
        <Lock />
        <span className="unseen">Frozen, </span>
      </>
    )}
    {state.charAt(0).toUpperCase() + state.slice(1)}
  </span>
);

const surfaceLines = {
  dry: 'dry',
  damp: 'damp',
  soft: 'soft',
  closed: 'closed',
  unknown: '? unknown',
} as const;

/** Dry bold, damp underlined, soft in a band, closed struck, unknown in a dotted box. */
export const SurfaceWord = ({ state }: { readonly state: keyof typeof surfaceLines }) => (
  <span className={`surface ${state}`}>{surfaceLines[state]}</span>
);
