import { pick, type Random } from '../random.js';
import { StopExchanger } from './exchange-stops.js';
import { type FlatOpenProblem, usualUnitPrice } from './flat-open-problem.js';
import { OpenState } from './open-state.js';
import { SiteReinserter } from './reinsert-site.js';
import { RouteShortener } from './shorten-route.js';

/** A plan to try changes on, what wrongs in it cost for now, and how sites come off it and back. */
export class Rebuild {
  readonly trial: OpenState;
  /** Most routes by day. */
  readonly mostRoutes: Int16Array;
  private shortPrice: number;
  private overPrice: number;
  private readonly reinserter: SiteReinserter;
  private readonly exchanger: StopExchanger;
  private readonly shortener: RouteShortener;
  private readonly changed: Uint8Array;

  constructor(
    private readonly flat: FlatOpenProblem,
    private readonly random: Random,
  ) {
    this.trial = new OpenState(flat);
    this.mostRoutes = new Int16Array(flat.days).fill(flat.vehicles);
    this.shortPrice = usualUnitPrice(flat);
    this.overPrice = this.shortPrice / 4;
    this.reinserter = new SiteReinserter(this.trial, random);
    this.exchanger = new StopExchanger(flat, this.trial);
    this.shortener = new RouteShortener(flat);
    this.changed = new Uint8Array(flat.days * flat.vehicles);
  }

  /** Takes sites off the trial and returns them one by one; then the routes they are on are shortened. */
  bringBack(sites: readonly number[], noise: number, freeOpening = -1): void {
    const { trial, shortPrice, overPrice, mostRoutes } = this;
    for (const site of sites) trial.remove(site);
    for (const site of inSomeOrder(sites, this.flat, this.random))
      this.reinserter.reinsert(site, { shortPrice, overPrice, noise, mostRoutes, freeOpening });
    this.shortenRoutesOf(sites);
  }

  /** Stops of the trial change between the routes that visit the sites and the others of the day, where that pays. */
  exchangeStopsOf(sites: readonly number[]): void {
    const { trial } = this;
    const { days } = this.flat;
    for (const site of sites)
      for (let visit = site * days; visit < (site + 1) * days; visit++)
        if (trial.slotOf[visit] >= 0) this.exchanger.improve(trial.slotOf[visit], this.overPrice);
  }

  private shortenRoutesOf(sites: readonly number[]): void {
    const { trial, changed } = this;
    const { days } = this.flat;
    changed.fill(0);
    for (const site of sites)
      for (let visit = site * days; visit < (site + 1) * days; visit++)
        if (trial.slotOf[visit] >= 0) changed[trial.slotOf[visit]] = 1;
    for (let slot = 0; slot < changed.length; slot++)
      if (changed[slot] === 1) this.shortener.shorten(trial, slot);
  }

  /** Cents, with the units short or overloaded at their price for now. */
  price(state: OpenState): number {
    return state.money + state.shortTotal * this.shortPrice + state.overTotal * this.overPrice;
  }

  /** Wrongs grow dearer while the search has them, and cheaper while it does without. */
  adaptPrices({ shortTotal, overTotal }: OpenState): void {
    this.shortPrice *= shortTotal > 0 ? 1.001 : 0.9995;
    this.overPrice *= overTotal > 0 ? 1.001 : 0.9985;
  }
}

/** At random, the largest demand first, or the farthest first. */
function inSomeOrder(
  sites: readonly number[],
  { problem, travel }: FlatOpenProblem,
  random: Random,
): number[] {
  const way = pick(random, 3);
  const rank = sites.map((site) => {
    if (way === 0) return random();
    if (way === 1) return -problem.sites[site].demand[0];
    return -travel[site + 1];
  });
  return sites
    .map((_, at) => at)
    .sort((a, b) => rank[a] - rank[b])
    .map((at) => sites[at]);
}
