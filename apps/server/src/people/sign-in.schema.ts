import { z } from 'zod';

export const signInSchema = z.strictObject({
  name: z
    .string()
    .min(1)
    .max(100)
    .meta({ description: 'Sign-in name', examples: ['dispatch'] }),
  password: z.string().min(1).max(200).meta({ format: 'password' }),
});

export const newPasswordSchema = z.strictObject({
  current: z.string().min(1).max(200).meta({ format: 'password' }),
  next: z
    .string()
    .min(10)
    .max(200)
    .meta({ format: 'password', description: 'At least 10 letters; any kind of them' }),
});

export type SignIn = z.output<typeof signInSchema>;
export type NewPassword = z.output<typeof newPasswordSchema>;
