/** Put in by the build, from package.json. */
declare const FETTLE_VERSION: string

export const VERSION: string = FETTLE_VERSION
