/** Standard acceleration of free fall, by definition. */
export const gravity_mPerS2 = 9.80665;
