/** What the checksum is good for, beside its digits. */
export const checksumSays =
  'The same digits on a printed sheet and from the terminal: the same design, to the last value.';
