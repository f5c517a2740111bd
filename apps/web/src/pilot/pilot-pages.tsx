import type { Person } from '../phone/index.js';
import { Page } from '../phone/index.js';

export const PilotPages = ({ person }: { readonly person: Person }) => <Page title={person.fullName} />;
