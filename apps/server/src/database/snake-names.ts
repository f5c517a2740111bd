import { DefaultNamingStrategy } from 'typeorm';

/** `changedBy` in code is `changed_by` in the database. */
export class SnakeNames extends DefaultNamingStrategy {
  override columnName(propertyName: string, customName: string | undefined): string {
    return customName ?? propertyName.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  }
}
