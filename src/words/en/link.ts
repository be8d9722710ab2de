/** The dialog with the link that carries a plan. */
export const linkWords = {
  title: 'A link with this plan in it',
  text: 'The plan is in the link itself, all of it, and goes nowhere but where you send the link. Whoever opens it gets the plan as it is now.',
  link: 'The link',
  copy: 'Copy the link',
  copied: 'Copied: paste it wherever you like.',
  notCopied: 'This browser does not let it be copied from here: copy it from the box yourself.',
};
