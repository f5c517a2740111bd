import './map.css';
import { addDays } from '@drumline/units';
import { useLocation, useSearchParams } from 'wouter';
import { useCalendar } from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { Button, Field, NotSetUp, Picture, PrintedFoot, TitleBlock } from '../../ui/index.js';
import { OpenMap } from './open-map.js';
import { useNetwork } from './use-map.js';

/** Drawn from the places table alone: no tiles, no other host. */
export const MapPage = ({ at }: PageProps) => {
  const { date, day, today, operatingDate } = useCalendar();
  const network = useNetwork();
  const [search, setSearch] = useSearchParams();
  const [, navigate] = useLocation();
  const shown = dayIn(search.get('day')) ?? today;
  const shownWords = shown === today ? operatingDate : date(shown);
  const dates = network.value?.outlook.dates ?? [];
  const levelsOf = dates.includes(shown) ? `End of ${day(shown)}` : 'Now';
  const goTo = (to: string) => setSearch(to === today ? {} : { day: to }, { replace: true });
  return (
    <>
      <TitleBlock
        title="Map"
        sub={shownWords}
        acts={
          <>
            <Button press="[" onPress={() => goTo(addDays(shown, -1))}>
              Day before
            </Button>
            <Button press="]" onPress={() => goTo(addDays(shown, 1))}>
              Day after
            </Button>
            <Button onPress={() => window.print()}>Print</Button>
          </>
        }
      >
        <Field label="Flights drawn">{shownWords}</Field>
        <Field label="Levels">{levelsOf}</Field>
        <Field label="Drawn from the places table">A picture for talking, not for navigation</Field>
      </TitleBlock>
      <Picture read={network}>
        {(value) =>
          value.places.length === 0 ? (
            <div className="work">
              <NotSetUp
                what="No place is set up yet"
                why="The chart is drawn from where places are and how far apart."
                step="places"
                stepWords="Set-up, Places"
              />
            </div>
          ) : (
            <OpenMap
              network={value}
              day={shown}
              levelsOf={levelsOf}
              selected={at[0]}
              onOpen={(code) => navigate(`/map/${code}${window.location.search}`, { replace: true })}
            />
          )
        }
      </Picture>
      <PrintedFoot>A later print replaces it: throw this one away then.</PrintedFoot>
    </>
  );
};

const dayIn = (text: string | null): string | undefined =>
  text !== null && /^(19|20|21)\d\d-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text))
    ? text
    : undefined;
