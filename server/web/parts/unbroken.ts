/** A number and its unit kept on one line by a non-breaking space, in texts written by hand (SI Brochure, 5.4.3). */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(?:[kmµ]?[VAWΩ]|VA|Hz|[cm]?m²?|m?s|K|°C|%|min|h)(?![\p{L}\d]))/gu, '$1\u00a0')
