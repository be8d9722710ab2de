/** The page before its scripts run, and the app as it stands among others on a machine. */
export const pageWords = {
  title: 'Girthline: plan a woven basket by its girth',
  description:
    'Plan a woven basket by its girth line, see it settle into shape, and take the row chart to the bench.',
  /** Where scripts are not allowed. */
  needsScript:
    'Girthline works out the basket in your browser, so it needs JavaScript. Please allow it for this page and load the page again.',
  /** Under its icon. */
  name: 'Girthline',
  /** Where the app's icon offers places in it. */
  atTheBench: 'At the bench',
};
