/** Hatches of the drawings: fuel kept, fuel burned, over a limit. Once a page. */
export const Patterns = () => (
  <svg className="load-patterns" width="0" height="0" aria-hidden="true">
    <defs>
      <pattern id="load-fuel" width="6" height="6" patternUnits="userSpaceOnUse">
        <path d="M-1 7L7 -1" stroke="var(--ink)" strokeWidth=".9" />
      </pattern>
      <pattern id="load-trip" width="6" height="6" patternUnits="userSpaceOnUse">
        <circle cx="1.5" cy="1.5" r=".9" fill="var(--ink)" />
        <circle cx="4.5" cy="4.5" r=".9" fill="var(--ink)" />
      </pattern>
      <pattern id="load-over" width="5" height="5" patternUnits="userSpaceOnUse">
        <path d="M-1 6L6 -1" stroke="var(--plum)" strokeWidth="1.6" />
      </pattern>
    </defs>
  </svg>
);
