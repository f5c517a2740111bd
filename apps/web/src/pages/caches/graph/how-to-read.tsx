/** The lines and marks of the graphs, in words. */
export const HowToRead = () => (
  <li className="cache-key">
    <b>How to read</b>
    <ul>
      {lines.map(([words, drawn]) => (
        <li key={words}>
          <svg className="level-graph" width="36" height="14" aria-hidden="true">
            {drawn}
          </svg>
          {words}
        </li>
      ))}
      <li>
        Days of cover: usable now at the mean draw, no deliveries. Where early draws empty it sooner: mean
        draw.
      </li>
    </ul>
  </li>
);

const lines: readonly (readonly [words: string, drawn: React.ReactNode])[] = [
  ['level with approved and offered flights', <path key="w" className="with" d="M0 7H34" />],
  ['with no deliveries', <path key="n" className="without" d="M0 7H34" />],
  ['minimum', <path key="m" className="minimum" d="M0 7H34" />],
  ['critical', <path key="c" className="critical" d="M0 7H34" />],
  ['medevac reserve', <rect key="r" className="reserve" y="1" width="34" height="12" />],
  ['approved or slung, drums', square('filled')],
  ['offered, drums', square('open')],
  ['4? needs a decision', square('asked')],
  ['fuel leaves', <path key="d" className="draws" d="M14 4h6l-3 6Z" />],
  ['now. Litre scales differ.', <path key="b" className="now" d="M17 1V14M13 1h8" />],
];

function square(look: string) {
  return (
    <g key={look} className={`delivery ${look}`}>
      <path d="M14 10v-6h6v6Z" />
    </g>
  );
}
