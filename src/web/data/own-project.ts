/** The server's word for where runs are that somebody added. */
export const ownProject = 'own'
