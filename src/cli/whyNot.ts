/** What the system refuses, in words, by its code. */
const WHY: Readonly<Record<string, string>> = {
  EACCES: 'there is no permission',
  EPERM: 'there is no permission',
  EROFS: 'it lies on a disk that can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'no more room is granted on this disk',
  EFBIG: 'the file would be too large',
  EPIPE: 'its reader has gone',
  EISDIR: 'it is a folder',
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of its path is no folder',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead in a circle',
  ETXTBSY: 'it is running',
  ENXIO: 'nothing reads from it',
};

/** Why a file cannot be read or written: one line for a person. */
export function whyNot(fault: unknown): string {
  const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
  return WHY[code] ?? (fault instanceof Error ? fault.message : String(fault));
}
