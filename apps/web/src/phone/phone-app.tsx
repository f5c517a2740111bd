import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { HelicopterPages } from '../helicopter/helicopter-pages.js';
import { PilotPages } from '../pilot/pilot-pages.js';
import { useRounds } from './round.js';
import { SignIn } from './sign-in.js';
import { StorageNotSafe } from './storage-not-safe.js';
import { WhatISent } from './what-i-sent.js';
import { useWho } from './who.js';
import { YourPhone } from './your-phone.js';

/** Whose phone it is decides what is shown; it opens without a line. */
export const PhoneApp = () => {
  const now = useWho();
  useRounds(now.state === 'here');
  if (now.state === 'not read') return null; // for as long as the phone needs to read its own notes
  if (now.state === 'nobody') return <SignIn />;
  return (
    <Router hook={useHashLocation}>
      <Switch>
        <Route path="/sent" component={WhatISent} />
        <Route path="/you" component={YourPhone} />
        <Route path="/storage" component={StorageNotSafe} />
        <Route>
          {now.person.roles.includes('helicopter crew') ? (
            <HelicopterPages person={now.person} />
          ) : (
            <PilotPages person={now.person} />
          )}
        </Route>
      </Switch>
    </Router>
  );
};
