import { useState } from 'react';
import { type Me, signOut } from '../api/index.js';
import { Button, Dialog, keysOfThePage, singleKeys, Tick, useKeys, useSingleKeys } from '../ui/index.js';
import { useGround } from './ground.js';

/** Who is here; opens what is theirs: light or dim, keys, sign out. */
export const Person = ({ me }: { readonly me: Me }) => {
  const [open, setOpen] = useState(false);
  useKeys({ '?': { does: 'All keys', act: () => setOpen(true) } });
  return (
    <>
      <button type="button" className="plain-link person" onClick={() => setOpen(true)}>
        {me.fullName}, {me.roles.join(', ')}
      </button>
      {open && <PersonDialog me={me} onClose={() => setOpen(false)} />}
    </>
  );
};

const PersonDialog = ({ me, onClose }: { readonly me: Me; readonly onClose: () => void }) => {
  const [ground, setGround] = useGround();
  const on = useSingleKeys();
  return (
    <Dialog
      title={me.fullName}
      onClose={onClose}
      acts={<Button onPress={() => void signOut()}>Sign out</Button>}
    >
      <Tick
        label="Dim, for a dark room"
        checked={ground === 'dim'}
        onChange={(dim) => setGround(dim ? 'dim' : 'light')}
      />
      <Tick label="Single keys" checked={on} onChange={singleKeys.set} />
      <h3>Keys</h3>
      <table className="lines">
        <caption className="unseen">Keys of this page</caption>
        <tbody>
          <KeyRow name="Alt and a figure" does="Opens a page" />
          <KeyRow name="Esc" does="Closes what is open, and leaves a form as it was" />
          {on && keysOfThePage().map(([name, does]) => <KeyRow key={name} name={name} does={does} />)}
        </tbody>
      </table>
      {!on && <p className="read">Single keys are off for you on this machine.</p>}
    </Dialog>
  );
};

const KeyRow = ({ name, does }: { readonly name: string; readonly does: string }) => (
  <tr>
    <th scope="row">
      <kbd>{name}</kbd>
    </th>
    <td>{does}</td>
  </tr>
);
