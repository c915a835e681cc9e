const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file or folder',
  ENOTDIR: 'a file where a folder should be',
  EISDIR: 'a folder',
  EACCES: 'a place that is closed to you',
  EPERM: 'a place that is closed to you',
  EROFS: 'a disk that is only for reading',
  ENOSPC: 'a full disk',
  ENAMETOOLONG: 'a name too long for a file',
  ELOOP: 'links that lead in a circle',
  ERR_INVALID_ARG_VALUE: 'a name that no file can have'
}

/** What the system has against a file, in words; undefined where it was not the system that failed. */
export function systemReason(error: unknown): string | undefined {
  const { code = '', errno } = error as NodeJS.ErrnoException
  return REASONS[code] ?? (errno === undefined ? undefined : `a file that the system refuses (${code})`)
}
