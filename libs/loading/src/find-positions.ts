import { type CabinConfiguration, configurationOf } from './aircraft-type.js';
import { type DrumAboard, type FlightCabin, type PlacedDrum, weightOf } from './cabin.js';
import { withoutPlace } from './loading-faults.js';
import { drumWindow, positionProblem } from './position-problem.js';
import { type SearchRules, searchPositions } from './search-positions.js';

/** Where the drums of a flight stand, or why they cannot. */
export type Positions =
  | {
      readonly found: true;
      /** In the order the drums were given. */
      readonly drums: readonly PlacedDrum[];
      /** Drums that stand elsewhere than in the standing loading. */
      readonly moved: number;
      readonly tailTip: 'checked' | 'not published, not checked';
    }
  | { readonly found: false; readonly why: string };

/**
 * Positions for drums (named or of planning weight) on a flight of any number of stops, such that `checkBalance` finds
 * no fault: envelope, floor limits, first stop's drums out first, nose wheel on the ground while unloading. Of all such
 * standings the one with the fewest rows left half full, then the fewest drums moved from the `standing` loading (drum
 * id to position id), then the one furthest forward. Exact: if it finds none there is none, and `why` names the rule in the way.
 */
export function findPositions(
  cabin: FlightCabin,
  drums: readonly DrumAboard[],
  standing: ReadonlyMap<string, string> = new Map(),
): Positions {
  const configuration = configurationOf(cabin.type, cabin.configuration);
  const why = hopeless(cabin, configuration, drums);
  if (why !== null) return { found: false, why };
  const problem = positionProblem(cabin, configuration, drums);
  const rules: SearchRules = { unloadOrder: true, tipArmIn: cabin.type.tipArmIn, standing };
  const solution = searchPositions(problem, rules);
  if (solution === null) return { found: false, why: ruleInTheWay() };
  const positions = new Map(solution.placings.map(({ drum, place }) => [drum, place.id]));
  return {
    found: true,
    drums: drums.map((drum) => ({ ...drum, position: positions.get(drum)! })),
    moved: solution.moved,
    tailTip: cabin.type.tipArmIn === null ? 'not published, not checked' : 'checked',
  };

  function ruleInTheWay(): string {
    const name = `No positions for ${drums.length} ${drums.length === 1 ? 'drum' : 'drums'}`;
    if (rules.tipArmIn !== null && searchPositions(problem, { ...rules, tipArmIn: null }))
      return `${name} keep the nose wheel on the ground while unloading; take fewer, or a tail stand`;
    const order = problem.places.map(({ unloadOrder }) => unloadOrder);
    if (new Set(order).size > 1 && searchPositions(problem, { ...rules, tipArmIn: null, unloadOrder: false }))
      return `${name} balance unless a later stop's drums stand in the way; take fewer, or turn the stops round`;
    return `${name} keep the balance and the floor limits on every leg; take fewer`;
  }
}

/** What no choice of positions can mend. */
function hopeless(
  cabin: FlightCabin,
  configuration: CabinConfiguration,
  drums: readonly DrumAboard[],
): string | null {
  for (const [leg, { from, to }] of cabin.fuel.legs.entries()) {
    const lost = withoutPlace(configuration, cabin.cargo, [], leg);
    if (lost.length > 0) return `${from}-${to}: ${lost.join('; ')}`;
    const aboard = drums.filter(({ offAfterLeg }) => offAfterLeg >= leg);
    const window = drumWindow(cabin, configuration, leg, weightOf(aboard));
    if (aboard.length === 0 && (window.from > 0 || window.to < 0))
      return `${from}-${to}: out of balance without a drum; ballast or other seats are needed`;
  }
  const places = configuration.drumPositions.length;
  return drums.length > places ? `${drums.length} drums for ${places} positions` : null;
}
