import { SetMetadata } from '@nestjs/common';
import { type Access, accessKey } from './access.js';

/** Whoever the permission table lets do this act. */
export const Act = (act: string) => SetMetadata<string, Access>(accessKey, { act });
