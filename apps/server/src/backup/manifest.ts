import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { z } from 'zod';
import { ConfigError } from '../config.js';

const name = z.string().regex(/^[a-z][a-z0-9_]*$/);

const manifestSchema = z.strictObject({
  format: z.literal('drumline-backup/1'),
  madeAt: z.iso.datetime(),
  /** The migrations that had run: the shape of the tables. */
  migrations: z.array(z.string()),
  /** In an order in which no line names another that comes later. */
  tables: z.array(
    z.strictObject({
      name,
      columns: z.array(name).min(1),
      rows: z.int().min(0),
      /** Of the packed file. */
      sha256: z.string(),
    }),
  ),
});

/** What is in a backup: a folder with this as `manifest.json`, and a packed file for each table. */
export type Manifest = z.output<typeof manifestSchema>;

export const manifestFile = (folder: string): string => join(folder, 'manifest.json');
export const tableFile = (folder: string, table: string): string => join(folder, `${table}.copy.gz`);

/** Reads a backup's list and compares every file with it, so that nothing is begun with half a backup. */
export const readManifest = async (folder: string): Promise<Manifest> => {
  const text = await readFile(manifestFile(folder), 'utf8').catch(() => {
    throw new ConfigError(`${folder} is not a backup: it has no manifest.json. Name the folder of one.`);
  });
  const read = manifestSchema.safeParse(parseJson(text));
  if (!read.success) {
    throw new ConfigError(
      `${manifestFile(folder)} is damaged, or of another version of Drumline. Take another backup.`,
    );
  }
  for (const table of read.data.tables) {
    const found = await sha256(tableFile(folder, table.name)).catch(() => null);
    if (found !== table.sha256) {
      throw new ConfigError(
        `${tableFile(folder, table.name)} is missing or damaged. Nothing was restored: take another backup.`,
      );
    }
  }
  return read.data;
};

export const sha256 = async (file: string): Promise<string> => {
  const hash = createHash('sha256');
  await pipeline(createReadStream(file), hash);
  return hash.digest('hex');
};

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};
