/** What somebody is called to their face: the first word of a name as it is written. */
export const firstNameOf = (name: string): string => name.trim().split(/\s+/)[0] ?? '';
