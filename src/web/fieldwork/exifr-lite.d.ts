/** The part of the library that reads what cameras write into JPEG and HEIC; it is typed as the whole. */
declare module 'exifr/dist/lite.esm.mjs' {
  export { parse } from 'exifr'
}
