import { Route, Switch } from 'wouter';
import type { Person } from '../phone/index.js';
import { AsTextPage } from './as-text-page.js';
import { CodeSquarePage } from './code-square-page.js';
import { CorrectPage } from './correct-page.js';
import { DayList } from './day-list.js';
import { Elsewhere } from './elsewhere.js';
import { LeftHere } from './left-here.js';
import { LegCard } from './leg-card.js';
import { Loaded } from './loaded.js';
import { NewerVersion } from './newer-version-page.js';
import { ProblemPage } from './problem.js';
import { SurfacePage } from './surface.js';

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
