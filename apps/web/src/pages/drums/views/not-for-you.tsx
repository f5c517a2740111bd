import { EmptyLine } from '../../../ui/index.js';

/** A list that a role does not see. */
export const NotForYou = ({ title }: { readonly title: string }) => (
  <>
    <h2>{title}</h2>
    <EmptyLine>
      This list is for the storekeeper, the dispatcher, the operations manager, fuel quality and accounts. Ask
      one of them.
    </EmptyLine>
  </>
);
