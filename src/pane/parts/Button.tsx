import type { ComponentProps, MouseEvent } from "react";

export type ButtonProps = Omit<ComponentProps<"button">, "disabled"> & {
  /** `primary`: the one that a page or form is for. */
  readonly appearance?: "primary" | "secondary";
  readonly size?: "small" | "medium";
  /** Does nothing for now, and stays where the keyboard finds it, so that focus is not lost. */
  readonly disabledFocusable?: boolean;
};

/** A button of the pane: the browser's own, in the pane's look. */
export function Button({
  appearance = "secondary",
  size = "medium",
  disabledFocusable = false,
  type = "button",
  className = "",
  onClick,
  ...rest
}: ButtonProps) {
  const press = (event: MouseEvent<HTMLButtonElement>) => {
    if (disabledFocusable) event.preventDefault();
    else onClick?.(event);
  };
  const look = `pn-button${appearance === "primary" ? " pn-button-main" : ""}${size === "small" ? " pn-button-small" : ""}`;
  return (
    <button
      {...rest}
      type={type}
      className={`${look} ${className}`.trim()}
      {...(disabledFocusable && { "aria-disabled": true })}
      onClick={press}
    />
  );
}
