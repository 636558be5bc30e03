// The words of the sentences, in the order in which they are tried where several could stand. One catalogue for the tokens,
// the completion and the words page.

/** A word or run of words with a meaning of its own. */
export type Phrase = {
  /** Name of the term in the grammar. */
  readonly term: string;
  /** As it is written, single spaces between words. */
  readonly words: string;
  /** What must follow for it to be this phrase, beside the end of the word. */
  readonly before?: RegExp;
};

const OPERAND = /^\s*[\p{L}\p{N}_`("“.−-]/u;
/** At the start of a sentence a column could stand too: it is the column if a sentence goes on behind it. */
const OPERAND_FOLLOWS =
  /^\s+(?!(?:against|across|beside|word|is|and|or|stays|has)(?![\p{L}\p{N}_]))[\p{L}\p{N}_`("“.−-]/u;

/** Every phrase. Of two with one spelling, the first that can stand at a place is taken. */
export const phrases: readonly Phrase[] = [
  { term: "From", words: "from" },
  { term: "DialFrom", words: "from" },
  { term: "Join", words: "join" },
  { term: "On", words: "on" },
  { term: "PieceIs", words: "piece is" },
  { term: "PiecesShare", words: "pieces share" },
  { term: "FinishedOn", words: "finished on" },
  { term: "Correct", words: "correct" },
  { term: "LeaveOutPiece", words: "leave out piece" },
  { term: "Because", words: "because" },
  { term: "Sheet", words: "sheet" },
  { term: "TableWord", words: "table" },
  { term: "To", words: "to" },
  { term: "Step", words: "step" },
  { term: "Against", words: "against" },
  { term: "Across", words: "across" },
  { term: "Beside", words: "beside" },
  { term: "WordsOf", words: "words of", before: OPERAND_FOLLOWS },
  { term: "WordWord", words: "word", before: /^\s*["“]/ },
  { term: "Expect", words: "expect", before: OPERAND_FOLLOWS },
  { term: "ThenExpect", words: "expect" },
  { term: "When", words: "when", before: OPERAND_FOLLOWS },
  { term: "For", words: "for" },
  { term: "Rank", words: "rank", before: OPERAND_FOLLOWS },
  { term: "AllowingFor", words: "allowing for" },
  { term: "AsPowerLaw", words: "as a power law" },
  { term: "StaysWithin", words: "stays within" },
  { term: "SameWithin", words: "are the same within" },
  { term: "Within", words: "within" },
  { term: "Where", words: "where" },
  { term: "ByAtLeast", words: "by at least" },
  { term: "GroupBy", words: "by" },
  { term: "PictureBy", words: "by" },
  { term: "RankBy", words: "by" },
  { term: "ByRig", words: "by" },
  { term: "ByMethod", words: "by" },
  { term: "GroupOf", words: "of" },
  { term: "OfValue", words: "of" },
  { term: "OfTable", words: "of" },
  { term: "Rises", words: "rises" },
  { term: "Falls", words: "falls" },
  { term: "GiveOrTake", words: "give or take" },
  { term: "AmountGiveOrTake", words: "give or take" },
  { term: "HasMore", words: "has more" },
  { term: "HasLess", words: "has less" },
  { term: "Than", words: "than" },
  { term: "InAtLeast", words: "in at least" },
  { term: "Stated", words: "stated" },
  { term: "WhenIs", words: "is" },
  { term: "ClaimIs", words: "is" },
  { term: "IsNot", words: "is not" },
  { term: "Is", words: "is" },
  { term: "JoinAnd", words: "and" },
  { term: "And", words: "and" },
  { term: "Or", words: "or" },
  { term: "Not", words: "not", before: OPERAND },
  { term: "If", words: "if", before: OPERAND },
  { term: "Then", words: "then" },
  { term: "Else", words: "else" },
  { term: "Missing", words: "missing" },
  { term: "InFile", words: "in" },
  { term: "ShowIn", words: "in" },
];
