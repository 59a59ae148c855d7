/** Stands on every page of the coach's own, unseen, so that one which strays among the public files is known for what it is. */
export const PRIVATE_MARK = 'chalkleaf-private-9d41f0c2';
