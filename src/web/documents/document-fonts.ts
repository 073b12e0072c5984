/** The faces that documents are set in, by their full names; what the first two lack is in the others. */
export const documentFonts = [
  'Libertinus Serif Regular',
  'Libertinus Serif Bold',
  'DejaVu Sans Mono',
  'DejaVu Sans Mono Bold',
] as const
