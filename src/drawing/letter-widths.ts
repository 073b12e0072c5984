/**
 * How far each letter from space to ~ moves on, in thousandths of the size: of the two faces that drawings are set in, Arial's
 * proportions on a screen and Libertinus Serif in documents, the wider.
 * @source tables cmap and hmtx of Arimo 1.33 (metric-compatible with Arial) and Libertinus Serif 7.040, regular and bold
 */
export const letterWidths = {
  regular: widths(`
    278 288 355 557 557 890 705 191 334 334 390 584 278 338 278 323
    557 557 557 557 557 557 557 557 557 557 278 278 584 584 584 557
    1016 695 667 723 723 667 611 778 730 297 500 667 557 839 723 778
    667 778 723 667 611 723 667 951 667 667 611 356 287 356 518 557
    392 557 557 500 557 557 310 557 557 271 272 512 264 834 557 557
    557 557 372 500 316 557 500 747 500 515 500 334 260 334 584`),
  bold: widths(`
    278 334 475 557 557 890 729 238 334 334 433 584 278 358 278 316
    557 557 557 557 557 557 557 557 557 557 334 334 584 584 584 611
    988 740 723 723 734 667 611 778 817 367 557 736 611 899 740 778
    667 778 723 667 652 732 700 1028 718 667 624 397 307 397 584 557
    392 557 611 557 611 557 391 611 619 322 312 613 325 905 616 611
    611 611 428 557 358 611 557 778 561 558 500 390 280 390 584`),
} as const

function widths(table: string): readonly number[] {
  return table
    .trim()
    .split(/\s+/)
    .map((width) => Number(width) / 1000)
}
