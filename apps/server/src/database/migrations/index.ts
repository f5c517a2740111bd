import { AppRole1700000000001 } from './0001-app-role.js';
import { People1700000000002 } from './0002-people.js';
import { Audit1700000000003 } from './0003-audit.js';
import { Territory1700000000004 } from './0004-territory.js';
import { Movements1700000000005 } from './0005-movements.js';
import { Proposals1700000000006 } from './0006-proposals.js';
import { SurfaceReports1700000000007 } from './0007-surface-reports.js';
import { Plans1700000000008 } from './0008-plans.js';
import { Flights1700000000009 } from './0009-flights.js';
import { Stock1700000000010 } from './0010-stock.js';
import { FirstPlansSettledLoads1700000000011 } from './0011-first-plans-settled-loads.js';
import { FlightReports1700000000012 } from './0012-flight-reports.js';
import { RaisedActs1700000000013 } from './0013-raised-acts.js';
import { LoadPositions1700000000014 } from './0014-load-positions.js';
import { Handovers1700000000015 } from './0015-handovers.js';
import { DemoTerritory1700000000016 } from './0016-demo-territory.js';
import { FlightsWithoutPlan1700000000017 } from './0017-flights-without-plan.js';
import { SlipNumbers1700000000018 } from './0018-slip-numbers.js';
import { StrangeReports1700000000019 } from './0019-strange-reports.js';
import { HoldCalls1700000000020 } from './0020-hold-calls.js';
import { LeftOutLines1700000000021 } from './0021-left-out-lines.js';
import { ToldWeights1700000000022 } from './0022-told-weights.js';
import { FilledDrums1700000000023 } from './0023-filled-drums.js';
import { FieldPhones1700000000024 } from './0024-field-phones.js';
import { TerritoryTime1700000000025 } from './0025-territory-time.js';
import { ClockSettings1700000000026 } from './0026-clock-settings.js';
import { RuleMarks1700000000027 } from './0027-rule-marks.js';

/** In order. A migration that has run somewhere is never changed: write the next one. */
export const migrations = [
  AppRole1700000000001,
  People1700000000002,
  Audit1700000000003,
  Territory1700000000004,
  Movements1700000000005,
  Proposals1700000000006,
  SurfaceReports1700000000007,
  Plans1700000000008,
  Flights1700000000009,
  Stock1700000000010,
  FirstPlansSettledLoads1700000000011,
  FlightReports1700000000012,
  RaisedActs1700000000013,
  LoadPositions1700000000014,
  Handovers1700000000015,
  DemoTerritory1700000000016,
  FlightsWithoutPlan1700000000017,
  SlipNumbers1700000000018,
  StrangeReports1700000000019,
  HoldCalls1700000000020,
  LeftOutLines1700000000021,
  ToldWeights1700000000022,
  FilledDrums1700000000023,
  FieldPhones1700000000024,
  TerritoryTime1700000000025,
  ClockSettings1700000000026,
  RuleMarks1700000000027,
] as const;
