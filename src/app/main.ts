/** Starts the page. */
import { mount } from 'svelte';
import App from './App.svelte';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/contrast.css';
import './styles/print.css';

const target = document.getElementById('app');
if (target === null) throw new Error('main: the page has no element "app" to live in');
target.replaceChildren();
mount(App, { target });
