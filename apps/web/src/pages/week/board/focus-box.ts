/** What was pressed is gone with what it did: the keyboard goes on from the flight's box on the board. */
export const focusBox = (id: string): void =>
  document.querySelector<HTMLElement>(`.week-board [data-flight="${CSS.escape(id)}"]`)?.focus();
