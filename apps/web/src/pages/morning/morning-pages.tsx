import type { PageProps } from '../../pages.js';
import { MorningPage } from './morning-page.js';
import { PaperPage } from './paper/paper-page.js';

/** The picture of the morning; below it what crews said by radio and wrote on paper. */
export const MorningPages = ({ at }: PageProps) => (at[0] === 'paper' ? <PaperPage /> : <MorningPage />);
