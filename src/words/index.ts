export { EDITED_WORDS, editedData, type Edition, inEdition } from './words.ts';
