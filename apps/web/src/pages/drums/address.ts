import { useCallback } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { actOf, type PageAct, type View, viewOf } from './views.js';

/** What is looked at stands in the address, so that it can be sent to another: /drums/0514?view=held&act=hold&batch=J27-041. */
export interface Address {
  readonly drum: string | null;
  readonly view: View;
  readonly last: string;
  readonly act: PageAct | null;
  readonly batch: string | null;
  readonly word: (name: string) => string;
  readonly go: Go;
}

export type Go = (to: Readonly<Record<string, string | null>>) => void;

/** `go` changes what it names and leaves the rest; null takes a word away; `drum` opens a drum. */
export const useAddress = (at: readonly string[]): Address => {
  const [search] = useSearchParams();
  const [, navigate] = useLocation();
  const drum = at[0] ?? null;
  const go = useCallback<Go>(
    (to) => {
      const words = new URLSearchParams(window.location.search);
      for (const [name, word] of Object.entries(to)) {
        if (name === 'drum') continue;
        if (word === null || word === '') words.delete(name);
        else words.set(name, word);
      }
      const open = 'drum' in to ? to.drum : drum;
      const query = words.toString();
      navigate(`/drums${open ? `/${encodeURIComponent(open)}` : ''}${query === '' ? '' : `?${query}`}`, {
        replace: true,
      });
    },
    [navigate, drum],
  );
  return {
    drum,
    view: viewOf(search.get('view')),
    last: search.get('last') ?? '',
    act: actOf(search.get('act')),
    batch: search.get('batch'),
    word: (name) => search.get(name) ?? '',
    go,
  };
};

/** To open a drum, whatever stands at the right. */
export const openDrum = (go: Go, number: string): void => go({ drum: number, act: null, batch: null });
