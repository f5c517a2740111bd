import { randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';

// OWASP's figures for argon2id: 19 MiB, two passes, one lane. The package's default algorithm is argon2id.
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const hashPassword = (password: string): Promise<string> => hash(password, cost);

const nobody = hashPassword(randomBytes(16).toString('hex'));

/** Takes as long for a name that nobody has as for one with a wrong password. */
export const isPasswordOf = async (passwordHash: string | undefined, password: string): Promise<boolean> =>
  (await verify(passwordHash ?? (await nobody), password)) && passwordHash !== undefined;

/** Easy to read out over the radio: no letter that looks like another. */
export const oneTimePassword = (): string => {
  const letters = 'abcdefghjkmnpqrstuvwxyz23456789';
  const drawn = Array.from(randomBytes(20), (byte) => letters[byte % letters.length]);
  return [0, 5, 10, 15].map((at) => drawn.slice(at, at + 5).join('')).join('-');
};
