import { z } from 'zod';

// zod compiles its schemas with `new Function`, which the pages' Content-Security-Policy refuses.
z.config({ jitless: true });
