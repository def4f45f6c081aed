/* What the theme's scripts share: every member of the one name `Guidecoat`. */

/** A whole-number fraction. */
interface Fraction { over: bigint; under: bigint }

/** Both ends pass; null is open. The ends are written as "12.5" or "385/3". */
interface Band { low: string | null; high: string | null }

interface Unit {
  name: string; symbol: string; spellings: string[]; factor: Fraction; offset: Fraction;
  measures: string; point: boolean; apart: boolean;
}

/** name, symbol, spellings, factor, offset, what it measures, point, apart */
type UnitRow = [string, string, string[], string, string, string, number, number];

type ReadNumber =
  | { value: Fraction; number: string; unit: string; problem?: undefined }
  | { problem: string; value?: undefined; number?: undefined; unit?: undefined };

/** A number in the unit that was asked for, or why it cannot be put there. */
interface Turned {
  value?: Fraction; from?: Unit; missing?: boolean; unknown?: string; unlike?: Unit; problem?: string;
}

interface Pair { first: string; then: string; danger: boolean }

/** Bands are written in short, see bands.js; `step` is what an answer is rounded to. */
interface NumericKey {
  unit: string; symbol: string; asks_unit?: boolean; band: string; step: string; slips: string[];
}

/** What the page knows of one solved variant of a question. */
type Marking =
  | { kind: "choice"; right: string[] }
  | { kind: "multiple_response"; right: string[] }
  | { kind: "order"; steps: string; pairs: Pair[] }
  | { kind: "match"; answers: Record<string, string> }
  | ({ kind: "numeric" } & NumericKey)
  | { kind: "written"; marks: number[] };

type MarkingOf<Kind> = Extract<Marking, { kind: Kind }>;

type Chosen = { form: "chosen"; letters: string[] };
type Ordered = { form: "ordered"; letters: string[] };
type Matched = { form: "matched"; answers: Record<string, string> };
type Typed = { form: "typed"; text: string };
type Awarded = { form: "awarded"; marks: number[] };
type Answer = Chosen | Ordered | Matched | Typed | Awarded | { form: "blank" | "illegible" };

/** Numerator and denominator, in lowest terms. */
type Share = [number, number];

interface MarkedNumber { read: ReadNumber; turned: Turned; right: boolean; wrongUnit: boolean; slip: number }

/** Days are whole numbers since 1 January 1970. */
interface ObjectiveState {
  half: number; day: number; today: "" | "right" | "wrong" | "mended"; since: number;
  items: Record<string, [number, number][]>;
}

type Standing = Omit<ObjectiveState, "items">;

/** One objective of the index: its words and the first item of each part. */
interface Entry { objective: string; text: string; parts: string[] }
interface PartsIndex { modules: Record<string, { title: string; lesson: boolean }>; objectives: Entry[] }

type Rank = "due" | "weak" | "new" | "firm";
interface Slot { entry: Entry; rank: Rank }
interface StoredQuestion { id: string; method: string; html: string }
interface Picked extends Slot { question: StoredQuestion; slot: number }

interface Mistake { item: string; objective: string; day: number; asked: string; given: string; why: string }

interface SearchEntry { title: string; names: string; text: string }
interface SearchIndex { places: Map<string, Map<number, number>>; stems: Map<string, string>; size: number }
interface MeantWords { words: Map<string, number>; guessed: boolean }
interface ScoredWord extends MeantWords { scores: Map<number, number> }
interface Found {
  entries: number[]; words: Map<string, number>; guesses: { typed: string; words: string[] }[]; all: boolean;
}

interface ExamForm { id: string; label: string; edition: string; minutes: number }
interface ExamState {
  turn: number; began: number; ended: number; at: number; handed: boolean; hidesTime: boolean;
  person: string; responses: Record<string, Answer>; written: Record<string, string>;
}
interface Exam {
  form: ExamForm; questions: HTMLElement[]; state: ExamState;
  keep(): void; show(step: string, place?: HTMLElement): void; review(): void; clear(): void;
}
interface ExamStore { load(): Promise<ExamState | null>; save(state: ExamState): void; clear(): Promise<boolean> }

interface GuidecoatScripts {
  /* elements */
  element(name: string, className?: string, text?: string): any;
  link(address: string, text?: string): HTMLAnchorElement;
  button(className: string, text: string, press: () => void): HTMLButtonElement;
  all(root: ParentNode, selector: string): any[];
  words(part: Element | null | undefined): string;
  counted(number: number, one: string, more: string): string;
  saveText(name: string, text: string): void;

  /* days */
  today(): number;
  dayWords(day: number): string;

  /* numbers, unit_words, and the generated units */
  units: UnitRow[];
  patterns: string;
  wholeIndex: PartsIndex;
  readNumber(typed: string): ReadNumber;
  exact(text: string): Fraction;
  inBand(value: Fraction, band: Band): boolean;
  shortNumber(value: Fraction): string;
  bandOf(text: string, step?: string): Band;
  wordOfBand(text: string, step: string, end: string, places: number): string;
  inAskedUnit(read: ReadNumber, key: NumericKey): Turned;

  /* schedule */
  schedule: {
    START: number;
    NEW_A_DAY: number;
    answered(state: Standing | undefined, right: boolean, day: number): Standing;
    gap(half: number): number;
    dueDay(state: Pick<Standing, "half" | "day">, need: number | null): number;
    isDue(state: Pick<Standing, "half" | "day">, day: number, need: number | null): boolean;
    recall(state: Pick<Standing, "half" | "day">, day: number): number;
  };

  /* progress, panel */
  progress: {
    record(objective: string, item: string, right: boolean, slip?: { asked: string; given: string; why: string }): void;
    of(objective: string): { right: number; wrong: number };
    wasRight(objective: string, item: string): boolean;
    tries(objective: string, item: string): [number, number][];
    state(objective: string): ObjectiveState | null;
    met(): string[];
    mistakes(): Mistake[];
    need(): number | null;
    setNeed(day: number | null): void;
    greeted(): boolean;
    greet(): void;
    isDue(objective: string): boolean;
    asText(): string;
    load(text: string): boolean;
    clear(): void;
    note(): string;
  };
  drawPanel(): void;
  tell(text: string): void;

  /* marking */
  share(data: Marking, answer: Answer): Share;
  isRight(share: Share): boolean;
  turnedRound(letters: string[], pairs: Pair[]): Pair[];
  wrongPairs(data: MarkingOf<"match">, answer: Matched): string[];
  markNumber(text: string, data: NumericKey): MarkedNumber;

  /* load_questions */
  parts: Record<string, StoredQuestion[]>;
  part(name: string): Promise<StoredQuestion[]>;
  takePagesFrom(other: (paths: string[]) => Promise<ParentNode[]>): void;
  partsIndex(place: Element): PartsIndex;
  partOf(entry: Entry, item: string): string;
  form(question: StoredQuestion, label: string): any;

  /* a question on a page */
  readAnswer: {
    choice(section: Element): Chosen;
    multiple_response(section: Element): Chosen;
    order(section: Element): Ordered;
    match(section: Element): Matched;
    numeric(section: Element): Typed;
  };
  startReordering(section: Element, tell: (state: string, text: string) => void): void;
  feedbackWords: {
    choices(chosen: number, hits: number, open: number): string;
    order(broken: number): string;
    pairs(wrong: number, total: number): string;
    unitProblem(read: ReadNumber, turned: Turned, key: NumericKey): string;
    converted(read: ReadNumber, turned: Turned, key: NumericKey): string;
    wrongUnit(read: ReadNumber, key: NumericKey): string;
    unknownSlip: string;
  };
  feedback: {
    show(section: Element, state: string, verdict: string, lines: Element[]): void;
    ask(section: Element, text: string): void;
    line(text: string): HTMLElement;
    reason(section: Element, selector: string, lead?: string): HTMLElement;
    reveal(section: Element, state: string, verdict: string, lines: Element[]): void;
    settle(section: any, right: boolean, verdict: string, lines: Element[], given: string, why?: string): void;
  };
  answer: Record<Marking["kind"], (section: any, data: any) => void>;
  frameQuestion(section: any, variants: number): void;
  fitOut(section: any, marking: any): void;
  showVariant(section: any, number: number): void;
  startQuestion(section: any): void;
  startOneAtATime(section: Element): void;

  /* checks */
  wantedToday(objectives: Entry[], day: number, need: number | null): Slot[];
  wantedOfModule(objectives: Entry[], day: number, need: number | null): Slot[];
  partWanted(entry: Entry): string;
  picked(wanted: Slot[], questionsOf: (entry: Entry) => StoredQuestion[], day: number): Picked[];
  keptApart<Kept extends { question: { method: string } }>(picks: Kept[]): Kept[];
  runCheck(part: any, picks: Picked[], done: (asked: Picked[], right: boolean[]) => void): void;
  summary(place: Element, picks: Picked[], right: boolean[], index: PartsIndex): void;
  startChecks(): void;
  startLookBack(place: Element): void;

  /* the page */
  startPrint(button: any): void;
  startKeeping(actions: any): void;
  startNeed(form: any): void;
  startPage(): void;
  onPage(start: () => void): void;

  /* search */
  searchIndex: {
    words(text: string): string[];
    stem(word: string): string;
    indexed(entries: SearchEntry[]): SearchIndex;
    ask(index: SearchIndex, pairs: [string, string][], text: string): Found;
  };

  /* an exam on a screen */
  minutesUsed(began: number, ended: number): number;
  minutesOver(began: number, ended: number, minutes: number): number;
  timeIsUp(began: number, now: number, minutes: number): boolean;
  timeWords(began: number, now: number, minutes: number): string;
  typable(text: string): string;
  codeOf(text: string): string;
  takeAnswer(section: any): Answer | string | null;
  putBack(section: any, answer: any): void;
  stillOpen(section: any, answer: any): string;
  numberProblem(answer: any): string;
  answersName(form: ExamForm): string;
  answersText(form: ExamForm, state: ExamState): string;
  examStore(name: string, onChange: (what: string) => void): ExamStore;
  layAnswers(exam: Exam): void;
  openQuestions(exam: Exam): [any, string][];
  showQuestion(exam: Exam, place: number): void;
  startExamQuestions(exam: Exam): void;
  review(exam: Exam): void;
  showDone(exam: Exam): void;
  startHandIn(exam: Exam): void;
}


declare var Guidecoat: GuidecoatScripts;
interface Window { Guidecoat: GuidecoatScripts; guidecoatSearchList: any }
