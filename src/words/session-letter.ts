/** What a session is called by in every language: its short name as a letter, a longer one as the coach wrote it. */
export const sessionLetter = (id: string): string => (id.length < 3 ? id.toUpperCase() : id);
