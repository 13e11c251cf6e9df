/** A name in words as a part of a stable name: "load of an axle" as "load-of-an-axle". */
export const dashedName = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/[{}]/g, '')
    .replaceAll(/[^a-z0-9]+/g, '-');
