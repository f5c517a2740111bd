import type { RaisedKind } from './raised.js';

/**
 * What can hurt people as long as nobody looks: it comes before everything else that is raised. A load that may not be
 * carried so, or a crew with a problem; fuel that should not be used, or that nobody knows, and may be.
 */
export const mayHurt: ReadonlySet<RaisedKind> = new Set<RaisedKind>([
  'load or problem',
  'loaded before filled',
  'held drum loaded',
  'held drum used',
  'released by one person',
  'holds nothing',
  'unknown batch',
  'unlike its batch',
  'impossible figures',
]);
