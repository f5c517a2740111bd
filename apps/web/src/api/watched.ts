/** Which kinds of /api/changes make an answer another one, by the first word of its path. */
const watched: Readonly<Record<string, readonly string[]>> = {
  flights: ['flights', 'stock', 'surfaceReports', 'territory'],
  week: ['flights', 'plans', 'stock', 'surfaceReports', 'territory'],
  plans: ['plans'],
  // What a booked flight could take: by limits, surfaces, the drums at its base and what else lands there.
  'booked-flights': ['flights', 'stock', 'surfaceReports', 'territory'],
  morning: ['flights', 'handovers', 'plans', 'proposals', 'stock', 'surfaceReports', 'territory'],
  'paper-entries': ['stock', 'flights', 'surfaceReports'],
  handovers: ['handovers'],
  'surface-reports': ['surfaceReports'],
  proposals: ['proposals'],
  movements: ['stock'],
  stock: ['stock', 'flights', 'territory'],
  drums: ['stock'],
  raised: ['stock'],
  holds: ['stock'],
  cases: ['stock', 'proposals'],
  'closed-cases': ['stock', 'proposals'],
  projections: ['stock', 'flights', 'territory'],
  scenario: ['territory', 'stock', 'flights', 'surfaceReports'],
  me: [],
  people: [],
  audit: [],
};

/** `/api/flights/F05` changes with flights and with what flights are checked against; a territory list with the territory. */
export const kindsOf = (path: string): readonly string[] => {
  const word = path.replace(/^\/api\//, '').split(/[/?]/)[0]!;
  return watched[word] ?? ['territory', word];
};
