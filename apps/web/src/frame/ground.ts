import { useEffect, useState } from 'react';

type Ground = 'light' | 'dim';

const kept = (): Ground => (localStorage.getItem('drumline.ground') === 'dim' ? 'dim' : 'light');

/** Before the first picture, so that a dark room stays dark. */
export const showGround = (): void => {
  document.documentElement.dataset.ground = kept();
};

/** Light by default, for the sun; dim for night rooms. Kept on this machine. */
export const useGround = (): [Ground, (next: Ground) => void] => {
  const [ground, setGround] = useState(kept);
  useEffect(() => {
    localStorage.setItem('drumline.ground', ground);
    showGround();
  }, [ground]);
  return [ground, setGround];
};
