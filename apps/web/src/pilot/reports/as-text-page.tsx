import { useState } from 'react';
import { Link } from 'wouter';
import { Main, Notice, Page, type Person, useEntries } from '../../phone/index.js';
import { useDay } from '../day/day.js';
import { WhatWasSaid } from '../loaded/what-was-said.js';
import { deliveryAsTexts } from './as-text.js';

/** A kept delivery in 160 signs a message: for any messenger that has a line while the phone has none. */
export const AsTextPage = ({ seq, person }: { readonly seq: number; readonly person: Person }) => {
  const entry = useEntries()?.find((each) => each.seq === seq);
  const read = useDay();
  const [copied, setCopied] = useState<boolean | null>(null);
  const texts =
    entry === undefined || !read ? [] : deliveryAsTexts(entry, { timeZone: read.day.timeZone, person });
  const copy = () =>
    void navigator.clipboard.writeText(texts.join('\n')).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  return (
    <Page
      title="As a text message"
      above={entry === undefined ? undefined : <WhatWasSaid entry={entry} />}
      acts={
        <>
          <Link className="btn" href="/sent">
            Back
          </Link>
          {texts.length > 0 && <Main onPress={copy}>{copied === true ? 'Copied' : 'Copy'}</Main>}
        </>
      }
    >
      {copied === false && (
        <Notice kind="check" word="Not copied." title="Hold a finger on the text, or type it as it stands." />
      )}
      {texts.length === 0 && <p className="said">Only drums left or brought back have such a form.</p>}
      {texts.map((text) => (
        <p key={text} className="said as-text">
          {text}
        </p>
      ))}
      {texts.length > 0 && (
        <p className="said">
          Send it by any messenger. Base pastes it in under Radio and paper. This report stays here and goes
          by itself when there is a signal: the two count once.
        </p>
      )}
    </Page>
  );
};
