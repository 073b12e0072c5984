/**
 * Whether this is a tab of an iPhone's or iPad's browser, which keeps another store than the app installed from it. Only
 * there does a browser say whether it is `standalone`.
 */
export const isMereTab = (browser: object): boolean => 'standalone' in browser && browser.standalone === false
