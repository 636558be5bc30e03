/** Why a method was used that the question itself names. */
export const askedByName = "it was asked for by name";
