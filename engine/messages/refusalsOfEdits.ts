/** Refusals of a change to a job that cannot be made. The job stays as it was. */
export const refusalsOfEdits = {
  "edit-unreadable": {
    message: "The change cannot be read: {fault}.",
    remedy: "Give an add, remove, set or batch operation in its documented form.",
  },
  "edit-id-taken": {
    message: 'The list {list} already has an item "{id}".',
    remedy: "Give the new item another id.",
  },
  "edit-no-such-item": {
    message: 'The list {list} has no item "{id}".',
    remedy: "{suggestion}",
  },
  "edit-no-such-place": {
    message: "There is no place {path} to set.",
    remedy: "Set the field that holds it, whole.",
  },
  "edit-of-id": {
    message: "An id is given once and stays; it cannot be set.",
    remedy: "Add a new item and remove the old one.",
  },
  "edit-still-in-use": {
    message: "{what} cannot be taken away: {uses}.",
    remedy: "Move those or take them away first.",
  },
  "edit-too-large": {
    message:
      "The change has more than {limitCount} steps or is nested more than {depthCount} deep.",
    remedy: "Make it in several changes.",
  },
} as const;
