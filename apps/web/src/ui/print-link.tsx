import { mayOfAll, useMe, useNotSetUpYet } from '../api/index.js';
import { Button } from './button.js';

interface PrintLinkProps {
  /** Address of the PDF. */
  readonly href: string;
  /** Not available, and why: written beside it. */
  readonly offBecause?: string | undefined;
  readonly children: string;
}

/** Opens what the server prints beside the page, from where it goes to the printer. */
export const PrintLink = ({ href, offBecause, children }: PrintLinkProps) =>
  offBecause === undefined ? (
    <a className="button plain" href={href} target="_blank" rel="noreferrer">
      {children}
    </a>
  ) : (
    <Button offBecause={offBecause}>{children}</Button>
  );

/** For who sees every flight; nobody else has a use for all of a day. */
export const DayPackLink = () => mayOfAll(useMe(), 'approve flight', 'view') && <DayPack />;

const DayPack = () => (
  <PrintLink href="/api/day-pack.pdf" offBecause={useNotSetUpYet('settings', 'policy', 'places')}>
    Print day pack
  </PrintLink>
);

/** Slips with numbers that were never given before, for who counts or draws with no phone. */
export const SlipLinks = () => (
  <>
    <PrintLink href="/api/slips.pdf?kind=count">Print count slips</PrintLink>
    <PrintLink href="/api/slips.pdf?kind=draw">Print draw slips</PrintLink>
  </>
);
