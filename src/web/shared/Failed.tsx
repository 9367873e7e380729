/** Why something could not be kept, in the words of who refused it; nothing while all is well. */

export function Failed({ error }: { error: { readonly message: string } | null | undefined }) {
  if (!error) return null;
  return (
    <p role="alert" className="field-error">
      {error.message}
    </p>
  );
}
