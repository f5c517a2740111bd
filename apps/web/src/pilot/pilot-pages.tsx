import { Route, Switch } from 'wouter';
import type { Person } from '../phone/index.js';
import { CodeSquarePage } from './day/code-square-page.js';
import { DayList } from './day/day-list.js';
import { NewerVersion } from './day/newer-version-page.js';
import { Elsewhere } from './drums-here/elsewhere.js';
import { LeftHere } from './drums-here/left-here.js';
import { LegCard } from './leg/leg-card.js';
import { Loaded } from './loaded/loaded.js';
import { AsTextPage } from './reports/as-text-page.js';
import { CorrectPage } from './reports/correct-page.js';
import { ProblemPage } from './reports/problem.js';
import { SurfacePage } from './reports/surface.js';

/** The pilot's phone: the day, its legs, and five reports. */
export const PilotPages = ({ person }: { readonly person: Person }) => (
  <Switch>
    <Route path="/:flight/loaded">{({ flight }) => <Loaded id={flight} person={person} />}</Route>
    <Route path="/:flight/newer">{({ flight }) => <NewerVersion id={flight} />}</Route>
    <Route path="/:flight/problem/:leg">
      {({ flight, leg }) => <ProblemPage id={flight} leg={Number(leg)} person={person} />}
    </Route>
    <Route path="/:flight/elsewhere/:leg">
      {({ flight, leg }) => <Elsewhere id={flight} leg={Number(leg)} />}
    </Route>
    <Route path="/:flight/left/:leg/:place">
      {({ flight, leg, place }) => (
        <LeftHere id={flight} leg={Number(leg)} place={place} first="left at" person={person} />
      )}
    </Route>
    <Route path="/:flight/back/:leg/:place">
      {({ flight, leg, place }) => (
        <LeftHere id={flight} leg={Number(leg)} place={place} first="brought home" person={person} />
      )}
    </Route>
    <Route path="/surface/:place">{({ place }) => <SurfacePage code={place} person={person} />}</Route>
    <Route path="/correct/:seq">{({ seq }) => <CorrectPage seq={Number(seq)} person={person} />}</Route>
    <Route path="/text/:seq">{({ seq }) => <AsTextPage seq={Number(seq)} person={person} />}</Route>
    <Route path="/:flight/square">{({ flight }) => <CodeSquarePage id={flight} />}</Route>
    <Route path="/:flight/:leg">
      {({ flight, leg }) => <LegCard id={flight} leg={Number(leg)} person={person} />}
    </Route>
    <Route>
      <DayList person={person} />
    </Route>
  </Switch>
);
