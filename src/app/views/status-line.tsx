/** What just happened, said once and politely; troubles stand until they are over. */
export const StatusLine = ({
  message,
  troubles,
  unsaved,
}: {
  readonly message: string;
  readonly troubles: readonly string[];
  readonly unsaved: boolean;
}) => (
  <div class="status-line">
    <p role="status" aria-live="polite">
      {message}
      {unsaved ? " Not saved yet." : ""}
    </p>
    <div role="alert">
      {troubles.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  </div>
);
