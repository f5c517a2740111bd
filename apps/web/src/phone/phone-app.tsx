import { lazy, Suspense, useEffect } from 'react';
import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { dayPath } from '../pilot/day/day.js';
import { ChoosePassword } from './choose-password.js';
import { readsOf, useRounds } from './round.js';
import { SignIn } from './sign-in.js';
import { StorageNotSafe } from './storage-not-safe.js';
import { WhatIReported } from './what-i-reported.js';
import { type Person, useWho } from './who.js';
import { YourPhone } from './your-phone.js';

// Each crew's pages are a part of their own: nobody waits for the other's at the first load.
const PilotPages = lazy(async () => ({ default: (await import('../pilot/pilot-pages.js')).PilotPages }));
const SquaresOfDay = lazy(async () => ({
  default: (await import('../pilot/day/squares-of-day.js')).SquaresOfDay,
}));
const HelicopterPages = lazy(async () => ({
  default: (await import('../helicopter/helicopter-pages.js')).HelicopterPages,
}));

/** Whose phone it is decides what is shown; it opens without a line. */
export const PhoneApp = () => {
  const now = useWho();
  const isHere = now.state === 'here';
  useRounds(isHere && !now.person.mustChangePassword);
  if (now.state === 'not read') return null; // for as long as the phone needs to read its own notes
  if (now.state === 'nobody') return <SignIn />;
  if (now.person.mustChangePassword) return <ChoosePassword person={now.person} />;
  return (
    <Suspense fallback={null}>
      <Router hook={useHashLocation}>
        <PagesOf person={now.person} />
      </Router>
    </Suspense>
  );
};

const PagesOf = ({ person }: { readonly person: Person }) => {
  const isHelicopter = person.roles.includes('helicopter crew');
  // A helicopter's pages say themselves what they read; a pilot's day is read from whichever page is open.
  useEffect(() => {
    if (!isHelicopter) readsOf([dayPath]);
  }, [isHelicopter]);
  return (
    <Switch>
      <Route path="/sent" component={WhatIReported} />
      <Route path="/you" component={YourPhone} />
      <Route path="/storage">
        <StorageNotSafe>{!isHelicopter && <SquaresOfDay />}</StorageNotSafe>
      </Route>
      <Route>{isHelicopter ? <HelicopterPages person={person} /> : <PilotPages person={person} />}</Route>
    </Switch>
  );
};
