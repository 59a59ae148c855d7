/** What the operating system said, in words a coach can act on. */

const SENTENCES: Readonly<Record<string, string>> = {
  ENOENT: 'it is not there any more',
  EEXIST: 'a file of that name stands there',
  EACCES: 'this user may not touch it',
  EPERM: 'this user may not touch it',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the space allowed on this disk is used up',
  ENOTDIR: 'part of the path is a file, not a folder',
  EISDIR: 'it is a folder, not a file',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  ELOOP: 'its links lead round in a circle',
  ENAMETOOLONG: 'its name is too long',
  EBUSY: 'another program is using it',
  EIO: 'the disk reports a fault',
};

/** The fault's own code where it is one of the operating system's. */
export function diskFaultCode(fault: unknown): string | undefined {
  if (!(fault instanceof Error) || !('code' in fault)) return undefined;
  return typeof fault.code === 'string' ? fault.code : undefined;
}

export function sayDiskFault(fault: unknown): string {
  const code = diskFaultCode(fault);
  if (code !== undefined) return SENTENCES[code] ?? `the system says ${code}`;
  return fault instanceof Error ? fault.message : 'the system does not say why';
}

/** Of folders that were to be made: nothing was there before, so nothing can be gone. */
export const sayUnmade = (fault: unknown): string =>
  diskFaultCode(fault) === 'ENOENT' ? 'no folder can be made there' : sayDiskFault(fault);
