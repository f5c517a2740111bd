import { type Fault, parseScenario } from '@drumline/contract';
import { type PayloadRow, payloadTable, type Scenario } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { ClockService } from '../territory/clock.service.js';
import { TerritoryService } from '../territory/territory.service.js';

export type StripLimit = Scenario['stripLimits'][number];

/** Drums of a round trip from a base; null: it cannot be flown with a drum aboard, or the strip is closed to it. */
interface DrumsFrom {
  readonly base: string;
  readonly strip: string;
  readonly type: string;
  readonly dry: number | null;
  readonly soft: number | null;
}

export interface LimitFault extends Fault {
  readonly place: string;
  readonly type: string;
}

export interface CheckedLimits {
  readonly drums: readonly DrumsFrom[];
  /** Of the limits that were asked about, each below its own limit: `landingLb`. */
  readonly faults: readonly LimitFault[];
}

/** What strip limits let aeroplanes carry: those in force, or as they would be. */
@Injectable()
export class PayloadService {
  constructor(
    private readonly territory: TerritoryService,
    private readonly clock: ClockService,
  ) {}

  /** `changed` stand in the place of the limits in force of the same place and type; nothing is written. */
  async check(changed: readonly StripLimit[]): Promise<CheckedLimits> {
    const kept = await this.territory.everything(await this.clock.now());
    const names = new Set(changed.map(nameOf));
    const stripLimits = [...kept.stripLimits.filter((limit) => !names.has(nameOf(limit))), ...changed];
    const parsed = parseScenario({ ...kept, stripLimits });
    if (parsed.ok) return { drums: payloadTable(parsed.scenario).flatMap(drumsOf), faults: [] };
    return { drums: [], faults: parsed.faults.flatMap((fault) => ofLimit(fault, stripLimits)) };
  }
}

const nameOf = ({ place, type }: StripLimit): string => `${place}-${type}`;

const ofLimit = (fault: Fault, limits: readonly StripLimit[]): readonly LimitFault[] => {
  const [own, at, path] = /^stripLimits\[(\d+)\]\.?(.*)$/.exec(fault.path) ?? [];
  if (own === undefined) return [];
  const { place, type } = limits[Number(at)]!;
  return [{ ...fault, path: path!, place, type }];
};

const drumsOf = ({ base, strip, type, dry, soft }: PayloadRow): readonly DrumsFrom[] =>
  dry === null || soft === null ? [] : [{ base, strip, type, dry: carried(dry), soft: carried(soft) }];

const carried = (load: NonNullable<PayloadRow['dry']>): number | null =>
  load.flyable ? load.legs[0]!.drums : null;
