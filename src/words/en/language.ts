/** Language of these words by its code (BCP 47), for browsers, screen readers, dates and PDF files. */
export const language = 'en';
