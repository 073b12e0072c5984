/**
 * By which rule a summary was made. It is raised with every change of the program that makes a summary of the same
 * entries another one: what is kept by an earlier rule is then made anew, and never shown.
 */
export const summaryRule = 3
