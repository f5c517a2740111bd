import './helicopter.css';
import { type ReactNode, useEffect } from 'react';
import { Route, Switch } from 'wouter';
import { Notice, Page, type Person, readsOf } from '../phone/index.js';
import { CachePage } from './cache-page.js';
import { CorrectPage } from './correct-page.js';
import { CountKept } from './count/count-kept.js';
import { CountPage } from './count/count-page.js';
import { CrewDay } from './crew-day.js';
import { DoNotOpen } from './draw/do-not-open.js';
import { DrawPage } from './draw/draw-page.js';
import { SlingPage } from './sling/sling-page.js';
import { type AtPlace, placesPath, usePlaces } from './use-places.js';

/** The helicopter crew's phone: caches, and what is done at them: draw, count, sling. */
export const HelicopterPages = ({ person }: { readonly person: Person }) => {
  useEffect(() => readsOf([placesPath]), []);
  const here = usePlaces();
  if (here === undefined) return null; // for as long as the phone needs to read its own notes
  if (here === null) return <NeverTold person={person} />;
  const at = (page: (now: AtPlace) => ReactNode) => (params: { readonly place: string }) =>
    page({ here, person, place: params.place });
  return (
    <Switch>
      <Route path="/at/:place/draw/:drum">
        {({ place, drum }) => <DrawPage here={here} person={person} place={place} drum={drum} />}
      </Route>
      <Route path="/at/:place/drum/:drum">
        {({ place, drum }) => <DoNotOpen here={here} place={place} number={drum} />}
      </Route>
      <Route path="/at/:place/count">
        {at((now) => (
          <CountPage {...now} />
        ))}
      </Route>
      <Route path="/at/:place/counted">
        {at((now) => (
          <CountKept {...now} />
        ))}
      </Route>
      <Route path="/at/:place/sling">
        {at((now) => (
          <SlingPage {...now} />
        ))}
      </Route>
      <Route path="/correct/:seq">
        {({ seq }) => <CorrectPage here={here} person={person} seq={Number(seq)} />}
      </Route>
      <Route path="/at/:place">
        {at((now) => (
          <CachePage {...now} />
        ))}
      </Route>
      <Route>
        <CrewDay here={here} person={person} />
      </Route>
    </Switch>
  );
};

const NeverTold = ({ person }: { readonly person: Person }) => (
  <Page title={person.fullName}>
    <Notice kind="note" word="Nothing here yet." title="Base has never told this phone of the caches.">
      It needs a signal once. Everything works without one after that.
    </Notice>
  </Page>
);
