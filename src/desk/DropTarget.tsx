import { useEffect, useRef, useState } from "react";

/** Takes a file that is dragged in anywhere over the page, and says so while it hovers. */
export function DropTarget({ drop }: { readonly drop: (file: File) => void }) {
  const [isOver, setOver] = useState(false);
  const take = useRef(drop);
  take.current = drop;

  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files") !== true) return;
      // Without this the browser would leave the page and show the file by itself.
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const dropped = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files") !== true) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer.files[0];
      if (file !== undefined) take.current(file);
    };
    window.addEventListener("dragover", over);
    window.addEventListener("dragleave", leave);
    window.addEventListener("drop", dropped);
    return () => {
      window.removeEventListener("dragover", over);
      window.removeEventListener("dragleave", leave);
      window.removeEventListener("drop", dropped);
    };
  }, []);

  return isOver ? <div className="drop-here">Let go to open this workbook</div> : null;
}
